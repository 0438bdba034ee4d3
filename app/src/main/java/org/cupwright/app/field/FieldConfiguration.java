package org.cupwright.app.field;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Puts the changer's page together. */
@Configuration(proxyBeanMethods = false)
@ComponentScan
public class FieldConfiguration {
    @Bean
    WebMvcConfigurer changersPage() {
        return new WebMvcConfigurer() {
            @Override
            public void addResourceHandlers(ResourceHandlerRegistry registry) {
                registry.addResourceHandler("/round/files/**")
                        .addResourceLocations("classpath:" + PageFiles.OWN)
                        .setCacheControl(CacheControl.noCache());
            }
        };
    }
}
